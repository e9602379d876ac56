namespace Pattress.Tests.References;

/// <summary>
/// A board between two studs as shells of eight nodes: span a in x, held at both edges, 4 a long in y (an endless strip to 0.2 %), a square
/// patch of side u under load at xi, the mesh graded towards it.
/// </summary>
internal sealed class StripDeck
{
    private readonly double[] _x, _y;
    private readonly Dictionary<(int, int), int> _nodes = [];
    private readonly List<(double X, double Y, int[] Nodes)> _elements = [];
    private readonly double _a, _xi, _u;

    internal StripDeck(double a, double xi, double u)
    {
        (_a, _xi, _u) = (a, xi, u);
        int left = Math.Max(4, (int)Math.Round((xi - u / 2) / a * 16)), right = Math.Max(4, (int)Math.Round((a - xi - u / 2) / a * 16));
        _x = [0, .. Cuts(0, xi - u / 2, left, 0.85), .. Cuts(xi - u / 2, xi + u / 2, 4, 1), .. Cuts(xi + u / 2, a, right, 1 / 0.85)];
        _y = [-2 * a, .. Cuts(-2 * a, -u / 2, 12, 0.75), .. Cuts(-u / 2, u / 2, 4, 1), .. Cuts(u / 2, 2 * a, 12, 1 / 0.75)];
        for (int i = 0; i + 1 < _x.Length; i++)
            for (int j = 0; j + 1 < _y.Length; j++)
                _elements.Add(((_x[i] + _x[i + 1]) / 2, (_y[j] + _y[j + 1]) / 2, [.. new[] { (0, 0), (2, 0), (2, 2), (0, 2), (1, 0), (2, 1), (1, 2), (0, 1) }.Select(s => Node(2 * i + s.Item1, 2 * j + s.Item2))]));
    }

    internal IEnumerable<int> Left => Edge(0);

    internal IEnumerable<int> Right => Edge(2 * (_x.Length - 1));

    internal int Centre => _nodes[(2 * Array.FindIndex(_x, x => Math.Abs(x - _xi) < 1e-9), 2 * Array.FindIndex(_y, y => Math.Abs(y) < 1e-9))];

    internal string Text(double thickness, double modulus, double nu, double load)
    {
        var deck = new Deck();
        deck.Line("*NODE, NSET=ALL");
        foreach (var ((i, j), n) in _nodes) deck.Line($"{n}, {At(_x, i):R}, {At(_y, j):R}, 0.");
        deck.Line("*ELEMENT, TYPE=S8R, ELSET=BOARD");
        for (int e = 0; e < _elements.Count; e++) deck.Line($"{e + 1}, " + string.Join(", ", _elements[e].Nodes));
        Set(deck, "*NSET, NSET=EDGES", Left.Concat(Right));
        Set(deck, "*NSET, NSET=CENTRE", [Centre]);
        Set(deck, "*ELSET, ELSET=PATCH", Elements(_u / 2));
        Set(deck, "*ELSET, ELSET=MIDDLE", Elements(_u / 4));
        foreach (string line in new[] { "*MATERIAL, NAME=GYPSUM", "*ELASTIC" }) deck.Line(line);
        deck.Line($"{modulus:R}, {nu:R}");
        deck.Line("*SHELL SECTION, ELSET=BOARD, MATERIAL=GYPSUM");
        deck.Line($"{thickness:R}");
        foreach (string line in new[] { "*BOUNDARY", "EDGES, 3, 3" }) deck.Line(line);
        deck.Line($"{Centre}, 1, 2");
        deck.Line($"{_nodes[(0, 0)]}, 2, 2");
        foreach (string line in new[] { "*STEP", "*STATIC", "*DLOAD" }) deck.Line(line);
        deck.Line($"PATCH, P, {-load / _u / _u:R}");
        foreach (string line in new[] { "*NODE PRINT, NSET=CENTRE", "U", "*NODE PRINT, NSET=EDGES", "RF", "*EL PRINT, ELSET=MIDDLE", "S", "*END STEP" }) deck.Line(line);
        return deck.ToString();
    }

    private static IEnumerable<double> Cuts(double from, double to, int n, double ratio)
    {
        double all = Enumerable.Range(0, n).Sum(i => Math.Pow(ratio, i)), x = from;
        for (int i = 0; i < n; i++) yield return i == n - 1 ? to : x += (to - from) * Math.Pow(ratio, i) / all;
    }

    private int Node(int i, int j) => _nodes.TryGetValue((i, j), out int n) ? n : _nodes[(i, j)] = _nodes.Count + 1;

    private static double At(double[] cuts, int half) => half % 2 == 0 ? cuts[half / 2] : (cuts[half / 2] + cuts[half / 2 + 1]) / 2;

    private IEnumerable<int> Edge(int i) => _nodes.Where(n => n.Key.Item1 == i).Select(n => n.Value);

    private IEnumerable<int> Elements(double within) =>
        Enumerable.Range(0, _elements.Count).Where(e => Math.Abs(_elements[e].X - _xi) < within && Math.Abs(_elements[e].Y) < within).Select(e => e + 1);

    private static void Set(Deck deck, string head, IEnumerable<int> ids)
    {
        deck.Line(head);
        foreach (int[] row in ids.Chunk(12)) deck.Line(string.Join(", ", row) + ",");
    }
}
