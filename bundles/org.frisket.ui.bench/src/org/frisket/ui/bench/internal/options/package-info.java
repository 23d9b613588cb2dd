/** Forms made of described options, and what was set in them last. */
package org.frisket.ui.bench.internal.options;
