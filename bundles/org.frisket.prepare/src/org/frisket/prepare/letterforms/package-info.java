/** What a font can do with its letters: its features by their names, its axes, its named styles. */
package org.frisket.prepare.letterforms;
