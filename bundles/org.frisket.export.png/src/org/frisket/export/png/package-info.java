/** A picture of the job for people: stocks in their colours, operations by their patterns, with scale, unit, date and number. */
package org.frisket.export.png;
