/** The screen for stock and settings: the shelf, the test sheets, the machines. */
package org.frisket.ui.material;
