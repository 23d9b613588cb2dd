/** Verbs for what is printed and cut. */
package org.frisket.cli.print;
