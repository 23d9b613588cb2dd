/** Edits of sheets: what lies on them, guests, register marks and what was measured of them. */
package org.frisket.editing.sheets;
