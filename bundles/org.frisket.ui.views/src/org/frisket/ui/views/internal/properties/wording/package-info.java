/** The sections on wordings: what they say and in which font, how they are set, and what holds them together. */
package org.frisket.ui.views.internal.properties.wording;
