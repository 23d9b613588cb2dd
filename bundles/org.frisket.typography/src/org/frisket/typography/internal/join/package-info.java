/** Measuring how far two letters may be moved together along the line. Everything here works on flattened outlines. */
package org.frisket.typography.internal.join;
