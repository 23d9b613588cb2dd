/** What the rooms of this bundle share: the studio's store, opened off the UI thread. */
package org.frisket.ui.material.internal;
