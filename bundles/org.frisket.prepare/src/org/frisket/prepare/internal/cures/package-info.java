/** What helps against the findings of the built-in steps and checks. */
package org.frisket.prepare.internal.cures;
