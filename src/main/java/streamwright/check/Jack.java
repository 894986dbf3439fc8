package streamwright.check;

/** Names one jack, and so the cable in it. */
record Jack(String controller, int number) {
    String label() {
        return controller + " jack " + number;
    }

    String label(int stream) {
        return label() + " stream " + stream;
    }
}
