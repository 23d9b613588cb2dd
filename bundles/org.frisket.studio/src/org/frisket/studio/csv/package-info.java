/**
 * Tables of comma-separated values as spreadsheets write them: their encoding, their rows, and what is wrong with them by
 * row and column.
 */
package org.frisket.studio.csv;
