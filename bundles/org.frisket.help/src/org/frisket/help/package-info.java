/**
 * The pages that explain the suite, in each of its languages, and the search in them. Plain Java: the screen shows them,
 * but they can be read and searched without one.
 */
package org.frisket.help;
