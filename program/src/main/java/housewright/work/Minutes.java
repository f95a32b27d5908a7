package housewright.work;

/**
 * How long something takes a crew, as three points in whole minutes.
 *
 * @param least when all goes well
 * @param likely most often
 * @param most when it goes badly
 */
public record Minutes(int least, int likely, int most) {
    public Minutes {
        if (least < 0 || likely < least || most < likely) {
            throw new IllegalArgumentException("No three points: " + least + ", " + likely + ", " + most);
        }
    }

    /** The mean of a task by PERT, (least + 4 likely + most) / 6, in minutes; from memory of Malcolm et al. 1959. */
    public double mean() {
        return (least + 4.0 * likely + most) / 6;
    }

    /** The standard deviation by PERT, (most - least) / 6, in minutes. */
    public double deviation() {
        return (most - least) / 6.0;
    }
}
