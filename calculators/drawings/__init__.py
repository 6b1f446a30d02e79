"""Line drawings of answers: numbers in, shapes with whole-number coordinates out."""
