package org.frisket.ui.bench;

import org.frisket.model.Wording;

/**
 * Some letters of a wording.
 *
 * @param start index of the first (UTF-16)
 * @param end   index after the last
 */
public record TextRange(Wording wording, int start, int end) {
}
