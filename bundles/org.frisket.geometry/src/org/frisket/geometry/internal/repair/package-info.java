/** The built-in steps of repair, one class each, and what they share. */
package org.frisket.geometry.internal.repair;
