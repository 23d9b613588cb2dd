/** Removable drives that files are carried to machines on. */
package org.frisket.export.drive;
