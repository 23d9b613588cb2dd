/** Where on a closed line it may be begun, and where it may be left standing. */
package org.frisket.toolpath.internal.start;
