/** Edits that lay elements elsewhere on the bench, and those of the guides that they are laid by. */
package org.frisket.editing.arranging;
