/**
 * Sheets with parts of jobs on them: {@link org.frisket.sheets.JobParts} says what parts a job has,
 * {@link org.frisket.sheets.LaidSheets} what the sheets of a job come to. Everything here runs without a screen.
 */
package org.frisket.sheets;
