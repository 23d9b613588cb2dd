package org.frisket.toolpath.internal.plan;

import java.util.List;

import org.frisket.toolpath.Stage;

/**
 * The errands of a stage, the small ones first: of places that are equally near the way goes to the smaller.
 *
 * @param after for each errand the one that has to wait for it, or -1
 */
record StageWork(Stage stage, List<Errand> errands, int[] after) {
}
