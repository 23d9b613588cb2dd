package org.frisket.prepare.repair;

/**
 * An outline that stays as it is although it was asked for.
 *
 * @param element its id
 * @param reason  a sentence in the user's language
 */
public record Untouched(String element, String reason) {
}
