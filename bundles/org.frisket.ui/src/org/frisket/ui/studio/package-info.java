/** The studio's store on the screen: it is opened off the UI thread, and changes of other desks are seen. */
package org.frisket.ui.studio;
