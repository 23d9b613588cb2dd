/** The application: how the workbench starts, what its window is like, what stands in it. */
package org.frisket.app.internal;
