/** What the views have in common: following the bench in front, and how they name things. */
package org.frisket.ui.views.internal;
