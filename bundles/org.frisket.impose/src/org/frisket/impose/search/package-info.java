/** The search for room: first layouts, moving parts clear of each other, squeezing. */
package org.frisket.impose.search;
