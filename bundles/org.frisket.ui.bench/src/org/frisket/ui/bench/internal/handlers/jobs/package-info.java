/** Commands on the job as a whole: its files, its steps and its findings. */
package org.frisket.ui.bench.internal.handlers.jobs;
