/** A run as it is gone through: what is done at which time, where to jump, in which words. */
package org.frisket.run.play;
