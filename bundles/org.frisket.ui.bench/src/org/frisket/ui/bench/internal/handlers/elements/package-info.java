/** Commands on the selected elements, whatever they are: clipboard, order, groups, places. */
package org.frisket.ui.bench.internal.handlers.elements;
