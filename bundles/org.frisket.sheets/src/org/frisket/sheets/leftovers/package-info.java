/** What is left of sheets and kept for other jobs. */
package org.frisket.sheets.leftovers;
