/** The sheets of a job, to lay parts on them by hand or by themselves. */
package org.frisket.ui.sheets.internal.sheets;
