package org.frisket.orders;

import java.time.Instant;

/**
 * Something that was handed out of a job.
 *
 * @param at     when it was made
 * @param remark to whom, or what of it; empty if nobody said so
 */
public record Paper(PaperKind kind, Instant at, String person, String remark) {
}
