/** The properties of the selection, grouped by meaning. */
package org.frisket.ui.views.internal.properties;
