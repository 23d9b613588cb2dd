/** One of something for each line of a list: the list is asked for here, and what is made of it is an edit. */
package org.frisket.ui.bench.internal.lines;
