/** The stack: the layers of the job drawn edge-on, with their elements, to be shown, locked, named and restacked. */
package org.frisket.ui.views.internal.stack;
