/** Taking files of others onto the bench: asking how, reading them off the UI thread, and laying them in as one edit. */
package org.frisket.ui.bench.internal.imports;
