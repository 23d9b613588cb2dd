/**
 * Parts of jobs laid on sheets: {@link org.frisket.sheets.imposing.JobImposer} makes a
 * {@link org.frisket.sheets.imposing.SheetPlan} of jobs and choices; {@link org.frisket.editing.sheets.LaySheets} makes
 * it part of a job.
 */
package org.frisket.sheets.imposing;
