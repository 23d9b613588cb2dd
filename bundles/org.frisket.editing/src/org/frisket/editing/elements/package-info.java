/**
 * Edits of elements whatever they are: they come, go, are copied, grouped, ordered and named, and say how they are
 * worked.
 */
package org.frisket.editing.elements;
