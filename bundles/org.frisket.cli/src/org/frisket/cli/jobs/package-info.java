/** Verbs for whole jobs. */
package org.frisket.cli.jobs;
