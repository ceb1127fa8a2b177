package taperbook.session;

import java.util.List;
import java.util.Optional;
import taperbook.quantity.Quantity;

/**
 * The form of an item's value.
 *
 * @param form the form
 * @param quantity the quantity that is measured; present exactly for {@link Form#AMOUNT} and {@link
 *     Form#AMOUNT_OR_WORD}
 */
public record ItemKind(Form form, Optional<Quantity> quantity, List<String> words) {
  /** The forms of values. */
  public enum Form {
    /** A calendar date, ISO 8601 ({@code 2026-03-14}). */
    DATE,
    /** Any text. */
    TEXT,
    /** One of the {@link ItemKind#words()}. */
    WORD,
    /** A number with a unit of {@link ItemKind#quantity()}. */
    AMOUNT,
    /** A number with a unit, or one of the words without. */
    AMOUNT_OR_WORD,
    /** A correction of a distance: a factor with unit {@code 1}, or an excess in {@code %}. */
    CORRECTION,
    /**
     * A time on the clock of the readings: elapsed, with a minus sign before its zero, or as a
     * clock shows it.
     */
    MOMENT,
    /** A price: a number with a unit such as {@code EUR/kWh}, {@code EUR/min} or {@code EUR}. */
    PRICE
  }

  /** Copies the words. */
  public ItemKind {
    words = List.copyOf(words);
  }

  /** A date. */
  public static ItemKind date() {
    return new ItemKind(Form.DATE, Optional.empty(), List.of());
  }

  /** Any text. */
  public static ItemKind text() {
    return new ItemKind(Form.TEXT, Optional.empty(), List.of());
  }

  /** A choice of words. */
  public static ItemKind word(String... words) {
    return new ItemKind(Form.WORD, Optional.empty(), List.of(words));
  }

  /** A number with a unit. */
  public static ItemKind amount(Quantity quantity) {
    return new ItemKind(Form.AMOUNT, Optional.of(quantity), List.of());
  }

  /** A number with a unit, or a word. */
  public static ItemKind amountOrWord(Quantity quantity, String... words) {
    return new ItemKind(Form.AMOUNT_OR_WORD, Optional.of(quantity), List.of(words));
  }

  /** A correction of a distance. */
  public static ItemKind correction() {
    return new ItemKind(Form.CORRECTION, Optional.empty(), List.of());
  }

  /** A time on the clock of the readings. */
  public static ItemKind moment() {
    return new ItemKind(Form.MOMENT, Optional.empty(), List.of());
  }

  /** A price, whose unit ends in the given words: {@code /kWh}, {@code /min} or nothing. */
  public static ItemKind price(String per) {
    return new ItemKind(Form.PRICE, Optional.empty(), List.of(per));
  }
}
