/** What the commands of the bench do. */
package org.frisket.ui.bench.internal.handlers;
