/** Classes that break the rules of the architecture, to show that each rule can fail. */
package org.duskloom.engine.architecture.bad;
