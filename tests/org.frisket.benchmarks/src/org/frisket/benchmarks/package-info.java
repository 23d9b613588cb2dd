/** Speed and memory, each as a ratio against a peer in the same run. No verdicts: numbers are for reading. */
package org.frisket.benchmarks;
