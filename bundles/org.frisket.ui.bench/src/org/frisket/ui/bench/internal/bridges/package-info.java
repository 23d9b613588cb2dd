/** The mode in which the bridges of a wording are set by hand. */
package org.frisket.ui.bench.internal.bridges;
