/**
 * What the tests in windows share: screen, pointer, keys, opened benches. The tests lie in fragments of this bundle, one a
 * part of the screen ({@code org.frisket.ui.tests}, {@code org.frisket.ui.bench.tests}), which run side by side.
 */
package org.frisket.ui.tests;
