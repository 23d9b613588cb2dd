/** A format of a studio's own: a list of what is on a sheet, for whoever stands at the machine. */
package org.frisket.example.export;
