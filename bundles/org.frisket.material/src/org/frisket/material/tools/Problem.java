package org.frisket.material.tools;

/**
 * What is wrong with a value, in the user's language.
 *
 * @param option  the name of the option it stands at
 * @param message what is wrong and what would be right
 */
public record Problem(String option, String message) {
}
