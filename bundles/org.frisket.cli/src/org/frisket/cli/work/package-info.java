/** A job worked through, checked, reported and written, as several verbs need it. */
package org.frisket.cli.work;
