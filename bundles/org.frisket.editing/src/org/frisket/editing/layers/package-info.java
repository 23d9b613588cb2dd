/** Edits of the stack: its layers, and which of them elements lie on. */
package org.frisket.editing.layers;
