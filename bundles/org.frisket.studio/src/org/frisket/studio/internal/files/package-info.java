/** How H2 reaches its files. */
package org.frisket.studio.internal.files;
