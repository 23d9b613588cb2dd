/** What is known of the printers of a studio: measured once, kept, undone beforehand. */
package org.frisket.ui.print.internal.profiles;
