/** Edits of what is written: text, letters, how they are set, and what holds them together. */
package org.frisket.editing.wording;
