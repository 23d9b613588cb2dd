/**
 * Handing a job out as one file or as many: a {@link org.frisket.export.plan.HandoffRequest} says which sheets, in what
 * format, where and by what names; a {@link org.frisket.export.plan.HandoffPlan} made of it writes them and reports on each.
 */
package org.frisket.export.plan;
