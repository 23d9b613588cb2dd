/** Where fonts come from: sources, the fonts they list, and the library that finds one of them by its name. */
package org.frisket.typography.source;
