package taperbook.blank;

import java.util.List;

/**
 * Instructions on a recording sheet. The cautions are based on the duties of any driver and the
 * warnings at stations; the other instructions are common practice, no source.
 */
final class SheetTexts {
  private static final String MANUAL =
      "Follow the vehicle\u2019s manual and the station\u2019s instructions.";
  private static final String DAMAGE =
      "Do not use a damaged connector, cable or station; report it to the operator.";
  private static final String LICENSED =
      "Open nothing: electrical work is for licensed people only.";
  private static final String DRIVING =
      "Never read, write or film while driving: a passenger, a fixed camera or a logger does that.";
  private static final String RULES = "Local rules, traffic and weather come before any test.";

  static final List<String> SESSION_CAUTIONS =
      List.of(
          DRIVING,
          "Run low on the way only where a stop is safe and a charger is near.",
          MANUAL,
          DAMAGE,
          LICENSED,
          "Stand clear of moving cars, keep cables off walkways, and stay dry and visible.");

  static final List<String> SESSION_BEFORE =
      List.of(
          "Set the station as the navigation\u2019s destination, so that the car can warm its"
              + " battery on the way; note when.",
          "Arrive warm and low: at 10 % or below if it is safe.",
          "Note the battery temperature if the car shows it, before plugging in.",
          "Look who shares the station or its cabinet; take a stall that nobody shares.",
          "Fix the camera: car display, station display and a clock with seconds in frame, sharp,"
              + " without glare.",
          "Start the film, then read the state of charge, then plug in.",
          "Photograph the odometer, the rating on the station, the tariff and the software version.",
          "Put heating or cooling where it stays to the end, and write it under remarks.");

  static final List<String> SESSION_DURING =
      List.of(
          "Time counts from plugging in. Read all displays at once: best at each change of the"
              + " displayed state of charge.",
          "Leave empty what you did not read. Spare rows: where the power jumps, and where its"
              + " peak begins and ends.");

  static final List<String> SESSION_AFTER =
      List.of(
          "Arrived ______, plugged in ______, first power ______, unplugged ______, left ______,"
              + " on the clock of the readings.",
          "Photograph the last screens of car and station: time, energy, price.",
          "Note the last reading, then unplug and put the connector back. Keep film, photographs"
              + " and this sheet.",
          "Type it in: taperbook blank session NAME makes the files, taperbook check reads them.");

  static final List<String> DRIVE_CAUTIONS =
      List.of(
          DRIVING,
          "Hold a steady speed within the limit, and drop the test when traffic or weather asks"
              + " for it.",
          "Run low only where a stop is safe and a charger near, and plan a second charger.",
          MANUAL,
          DAMAGE,
          LICENSED,
          RULES);

  static final List<String> DRIVE_BEFORE =
      List.of(
          "Plan a loop or an out-and-back route that ends at a charger, with a second one near.",
          "Charge to the start state of charge shortly before, so that the battery is warm.",
          "Check the tyre pressure cold; note people and luggage.",
          "Set the trip display to zero; photograph it, the odometer and the state of charge.",
          "Set heating or cooling once, and leave it.",
          "Fix the camera on the displays, with a clock in frame, before you drive off.");

  static final List<String> DRIVE_DURING =
      List.of(
          "The passenger writes, or you do after each stop: never at the wheel.",
          "A leg ends where you can stop, or where a landmark in the film shows the distance.",
          "Note rain, wind, roadworks and queues, with the time.");

  static final List<String> DRIVE_AFTER =
      List.of(
          "Photograph trip display, odometer and state of charge before you switch off.",
          "Plug in: a range test and the session after it belong together.",
          "Type it in: taperbook blank range-test NAME makes the files, taperbook check reads them.",
          "Keep film, photographs and this sheet with the files.");

  private SheetTexts() {}
}
