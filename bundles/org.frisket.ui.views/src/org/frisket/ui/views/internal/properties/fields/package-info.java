/** What forms are made of: sections that fold, and fields that are typed into, ticked or chosen from. */
package org.frisket.ui.views.internal.properties.fields;
