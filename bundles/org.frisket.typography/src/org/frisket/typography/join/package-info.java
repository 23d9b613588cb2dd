/**
 * Making lettering hang together: bars under it and frames about it, bridges between chosen pieces, ties that hold dots
 * and accents. These work on clean {@linkplain org.frisket.geometry.Region regions}; moving letters together is for
 * {@link org.frisket.typography.Joiner} and {@link org.frisket.typography.StackJoiner}.
 */
package org.frisket.typography.join;
