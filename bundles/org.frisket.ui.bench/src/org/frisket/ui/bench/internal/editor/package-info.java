/** The editor: a job file, its one command stack, its picture made in the background, and what the status line says. */
package org.frisket.ui.bench.internal.editor;
