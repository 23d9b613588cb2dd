/** In which order stops are made, so that little way is travelled and nothing is made too early. */
package org.frisket.toolpath.order;
