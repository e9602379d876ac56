using System.Globalization;
using System.Text;

namespace Pattress.Working;

/// <summary>Typesets a step as plain text: <c>f_ax,k = 0.52·d^−0.5·… = … = 15.29 N/mm², clause</c>. Rounds for the eye only.</summary>
public static class FormulaText
{
    /// <summary>The whole step on one line.</summary>
    public static string Line(Step step, int digits = 4)
    {
        if (step.Symbol == Step.Case) return $"{Formula(step.Formula)}: {Numbers(step, digits)}, {(step.Value != 0 ? "so it is" : "so it is not")}, {step.Clause}";
        string formula = Formula(step.Formula), numbers = Numbers(step, digits), value = Number(step.Value, digits);
        var line = new StringBuilder(Symbol(step.Symbol)).Append(" = ").Append(formula);
        if (numbers != formula) line.Append(" = ").Append(numbers);
        if (numbers != value) line.Append(" = ").Append(value);
        if (step.Unit.Length > 0) line.Append(' ').Append(step.Unit);
        return step.Clause.Length > 0 ? line.Append(", ").Append(step.Clause).ToString() : line.ToString();
    }

    /// <summary>The formula with its symbols.</summary>
    public static string Formula(string formula) => Typeset(FormulaParser.Parse(formula), Symbol);

    /// <summary>The formula with its numbers, rounded to significant digits.</summary>
    public static string Numbers(Step step, int digits = 4) => Typeset(FormulaParser.Parse(step.Formula), name =>
    {
        foreach (var input in step.Inputs) if (input.Key == name) return Number(input.Value, digits);
        return Symbol(name);
    });

    /// <summary>A formula into which numbers were put already, each written as whoever shows it wants.</summary>
    public static string Numbers(string numbers, Func<double, string> show) => Typeset(FormulaParser.Parse(numbers), Symbol, 0, n => show(n.Value).Replace('-', '−'));

    /// <summary>A number to so many significant digits, without trailing zeros.</summary>
    public static string Number(double value, int digits = 4)
    {
        if (value == 0 || !double.IsFinite(value)) return value.ToString(CultureInfo.InvariantCulture);
        int decimals = digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        decimals = Math.Clamp(decimals, 0, 12);
        return Math.Round(value, decimals).ToString("0.############", CultureInfo.InvariantCulture).Replace('-', '−');
    }

    /// <summary>A symbol as standards print it: <c>rho_k</c> as ρ_k, <c>f_ax_k</c> as f_ax,k.</summary>
    public static string Symbol(string name)
    {
        string[] parts = name.Split('_', 2);
        string head = Greek(parts[0]);
        return parts.Length == 1 ? head : head + "_" + parts[1].Replace('_', ',');
    }

    private static string Greek(string word) => word switch
    {
        "alpha" => "α", "beta" => "β", "gamma" => "γ", "rho" => "ρ", "psi" => "ψ", "sigma" => "σ", "tau" => "τ", "xi" => "ξ",
        "nu" => "ν", "eta" => "η", "phi" => "φ", "Phi" => "Φ", "mu" => "μ", "Omega" => "Ω", "theta" => "θ", "PI" => "π", _ => word,
    };

    private static string Typeset(FormulaNode node, Func<string, string> name, int outer = 0, Func<NumberNode, string>? number = null) => node switch
    {
        NumberNode n => number?.Invoke(n) ?? n.Text,
        NameNode n => name(n.Name),
        MinusNode m => Wrap("−" + Typeset(m.Of, name, 4, number), outer > 4),
        BinaryNode b => Operation(b, name, outer, number),
        ChoiceNode c => Wrap($"{Typeset(c.Then, name, 0, number)} if {Typeset(c.If, name, 0, number)}, else {Typeset(c.Else, name, 0, number)}", outer > 0),
        CallNode c => Wrap(Call(c, name, number), outer >= 5 && c.Function == "Pow"),
        _ => throw new FormatException(node.GetType().Name),
    };

    private static string Operation(BinaryNode b, Func<string, string> name, int outer, Func<NumberNode, string>? number)
    {
        int rank = b.Operator switch { "*" or "/" => 3, "+" or "-" => 2, _ => 1 };
        int right = b.Operator is "-" or "/" ? rank + 1 : rank;
        string sign = b.Operator switch
        {
            "*" => "·", "/" => " / ", "+" => " + ", "-" => " − ", "<=" => " ≤ ", ">=" => " ≥ ", "==" => " = ", "&&" => " and ", "||" => " or ", _ => $" {b.Operator} ",
        };
        return Wrap(Typeset(b.Left, name, rank, number) + sign + Wrap(Typeset(b.Right, name, right, number), b.Right is MinusNode && rank > 1), rank < outer);
    }

    private static string Call(CallNode call, Func<string, string> name, Func<NumberNode, string>? number)
    {
        string first = Typeset(call.Arguments[0], name, 0, number);
        return call.Function switch
        {
            "Pow" => Typeset(call.Arguments[0], name, 5, number) + Power(Typeset(call.Arguments[1], name, call.Arguments[1] is MinusNode ? 0 : 5, number)),
            "Sqrt" => call.Arguments[0] is NameNode or NumberNode ? "√" + first : $"√({first})",
            "Abs" => $"|{first}|",
            "Log" => $"ln({first})",
            "Ceiling" => $"⌈{first}⌉",
            _ => $"{call.Function.ToLowerInvariant()}({string.Join("; ", FormulaSetting.Arguments(call).Select(a => Typeset(a, name, 0, number)))})",
        };
    }

    private static string Power(string exponent) => exponent switch { "2" => "²", "3" => "³", "4" => "⁴", _ => "^" + exponent };

    private static string Wrap(string text, bool needed) => needed ? $"({text})" : text;
}
