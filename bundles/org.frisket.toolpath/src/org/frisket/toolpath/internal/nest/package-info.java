/** What lies within which closed line. */
package org.frisket.toolpath.internal.nest;
