package org.frisket.prepare.repair;

import org.frisket.geometry.repair.Mend;

/**
 * One thing that a step would put right.
 *
 * @param element the id of the outline
 * @param step    what the step does, as its contribution says
 * @param mend    with its place in the job's frame
 */
public record PlannedRepair(String element, String step, Mend mend) {
}
