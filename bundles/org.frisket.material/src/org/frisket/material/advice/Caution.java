package org.frisket.material.advice;

/**
 * What can hurt somebody or spoil the work, in the user's language.
 *
 * @param id         tells the caution from others; stays
 * @param isBlocking whether the work must not be done like this
 */
public record Caution(String id, boolean isBlocking, String text) {
}
