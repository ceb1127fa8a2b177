package taperbook.blank;

import java.util.List;
import taperbook.i18n.Texts;

/**
 * Instructions on a recording sheet. The cautions are based on the duties of any driver and the
 * warnings at stations; the other instructions are common practice, no source.
 */
final class SheetTexts {
  private static final String MANUAL = Texts.of("blank.sheet_texts.follow_vehicle_s_manual_and");
  private static final String DAMAGE = Texts.of("blank.sheet_texts.do_not_use_damaged_connector");
  private static final String LICENSED =
      Texts.of("blank.sheet_texts.open_nothing_electrical_work_is");
  private static final String DRIVING = Texts.of("blank.sheet_texts.never_read_write_or_film");
  private static final String RULES = Texts.of("blank.sheet_texts.local_rules_traffic_and_weather");

  static final List<String> SESSION_CAUTIONS =
      List.of(
          DRIVING,
          Texts.of("blank.sheet_texts.run_low_on_way_only"),
          MANUAL,
          DAMAGE,
          LICENSED,
          Texts.of("blank.sheet_texts.stand_clear_of_moving_cars"));

  static final List<String> SESSION_BEFORE =
      List.of(
          Texts.of("blank.sheet_texts.set_station_as_navigation_s"),
          Texts.of("blank.sheet_texts.arrive_warm_and_low_at"),
          Texts.of("blank.sheet_texts.note_battery_temperature_if_car"),
          Texts.of("blank.sheet_texts.look_who_shares_station_or"),
          Texts.of("blank.sheet_texts.fix_camera_car_display_station"),
          Texts.of("blank.sheet_texts.start_film_then_read_state"),
          Texts.of("blank.sheet_texts.photograph_odometer_rating_on_station"),
          Texts.of("blank.sheet_texts.put_heating_or_cooling_where"));

  static final List<String> SESSION_DURING =
      List.of(
          Texts.of("blank.sheet_texts.time_counts_from_plugging_in"),
          Texts.of("blank.sheet_texts.leave_empty_what_you_did"));

  static final List<String> SESSION_AFTER =
      List.of(
          Texts.of("blank.sheet_texts.arrived_plugged_in_first_power"),
          Texts.of("blank.sheet_texts.photograph_last_screens_of_car"),
          Texts.of("blank.sheet_texts.note_last_reading_then_unplug"),
          Texts.of("blank.sheet_texts.type_it_in_taperbook_blank"));

  static final List<String> DRIVE_CAUTIONS =
      List.of(
          DRIVING,
          Texts.of("blank.sheet_texts.hold_steady_speed_within_limit"),
          Texts.of("blank.sheet_texts.run_low_only_where_stop"),
          MANUAL,
          DAMAGE,
          LICENSED,
          RULES);

  static final List<String> DRIVE_BEFORE =
      List.of(
          Texts.of("blank.sheet_texts.plan_loop_or_out_and"),
          Texts.of("blank.sheet_texts.charge_to_start_state_of"),
          Texts.of("blank.sheet_texts.check_tyre_pressure_cold_note"),
          Texts.of("blank.sheet_texts.set_trip_display_to_zero"),
          Texts.of("blank.sheet_texts.set_heating_or_cooling_once"),
          Texts.of("blank.sheet_texts.fix_camera_on_displays_with"));

  static final List<String> DRIVE_DURING =
      List.of(
          Texts.of("blank.sheet_texts.passenger_writes_or_you_do"),
          Texts.of("blank.sheet_texts.leg_ends_where_you_can"),
          Texts.of("blank.sheet_texts.note_rain_wind_roadworks_and"));

  static final List<String> DRIVE_AFTER =
      List.of(
          Texts.of("blank.sheet_texts.photograph_trip_display_odometer_and"),
          Texts.of("blank.sheet_texts.plug_in_range_test_and"),
          Texts.of("blank.sheet_texts.type_it_in_taperbook_blank_range"),
          Texts.of("blank.sheet_texts.keep_film_photographs_and_this"));

  private SheetTexts() {}
}
