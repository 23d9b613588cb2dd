/** Reading of extension points: lazy (attributes list, use instantiates) and fenced (a failure names its bundle). */
package org.frisket.prepare.extension;
