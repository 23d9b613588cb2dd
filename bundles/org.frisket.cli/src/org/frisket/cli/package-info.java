/** The command line. Verbs parse, call the services and print; no rule lives here. */
package org.frisket.cli;
