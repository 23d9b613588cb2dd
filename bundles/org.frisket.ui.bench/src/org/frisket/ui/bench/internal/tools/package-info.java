/** What the pointer does: move what it takes hold of, gather with a box, push the bench about. */
package org.frisket.ui.bench.internal.tools;
