/**
 * The ways of looking at a job: what is painted of each element, and with what. The same looks are painted on the bench
 * and on paper.
 */
package org.frisket.ui.bench.internal.looks;
