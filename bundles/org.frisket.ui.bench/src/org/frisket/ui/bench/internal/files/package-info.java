/**
 * The files of the bench: whether somebody else has written them, copies of what is not saved yet, the jobs opened
 * last. Apart from {@link org.frisket.ui.bench.internal.files.Autosave} nothing here knows the workbench.
 */
package org.frisket.ui.bench.internal.files;
