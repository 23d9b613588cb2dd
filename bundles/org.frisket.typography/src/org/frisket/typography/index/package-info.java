/**
 * What is known of all fonts at hand without opening them, and the search in it.
 * <p>
 * A {@link org.frisket.typography.index.FontIndexer} goes through the sources once, in the caller's thread, and keeps
 * what it learned in a folder by the content of the files; a {@link org.frisket.typography.index.FontIndex} answers
 * from memory.
 */
package org.frisket.typography.index;
