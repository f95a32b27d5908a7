/**
 * Benchmarks (JMH): each states what it measures and what it is set against in the same run. Start them with {@code
 * ./bench/run}; arguments go to JMH.
 */
package housewright.bench;
