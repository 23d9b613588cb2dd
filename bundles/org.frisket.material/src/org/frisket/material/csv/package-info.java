/**
 * Stock as tables of comma-separated values, as spreadsheets read and write them. What a table says wrongly is told by its
 * row and column; nothing of it is taken over in silence.
 */
package org.frisket.material.csv;
