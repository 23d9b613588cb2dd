package org.frisket.sheets.imposing;

import java.util.Set;

import org.frisket.sheets.SheetPart;

/**
 * How many copies of a part are to be laid.
 *
 * @param job      what placements call its job; null for the host
 * @param quantity without those that are pinned
 * @param priority the lower comes first
 * @param pinned   numbers of copies that lie already
 */
record Copies(String job, SheetPart part, int quantity, int priority, Set<Integer> pinned) {
}
