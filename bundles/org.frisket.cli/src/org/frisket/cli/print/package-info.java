/** Verbs for what is printed and then cut out. */
package org.frisket.cli.print;
