using System.Text.RegularExpressions;
using Pattress.Strength;

namespace Pattress.Tests.Strength;

public partial class RuleBookTests
{
    private const string Id = "en1995_1_1.8_7_2.withdrawal";

    private static Outcome<RuleAnswer> Ask(string id, params (string Name, string Text)[] inputs) =>
        RuleBook.Evaluate(id, inputs.ToDictionary(i => i.Name, i => i.Text));

    [Fact]
    public void Ids_are_fixed_in_shape_and_unique()
    {
        Assert.Equal(RuleBook.All.Count, RuleBook.All.Select(r => r.Id).Distinct().Count());
        Assert.All(RuleBook.All, r => Assert.Matches(IdShape(), r.Id));
        Assert.All(RuleBook.All, r => Assert.True(r.Title.Length > 5 && r.Clause.Length > 3 && r.Document.Length > 2, r.Id));
    }

    [Fact]
    public void Every_problem_is_reported_at_once()
    {
        var answer = Ask(Id, ("d", "6 kg"), ("l_ef", "NaN"), ("colour", "red"), ("n", "1,5"));
        Assert.Equal(
            ["$.colour unknown_input", "$.d quantity_wrong_unit", "$.l_ef quantity_not_a_number", "$.rho_k missing_input", "$.n quantity_wrong_unit"],
            answer.Problems.Select(p => $"{p.Path} {p.Code}").Select(s => s.Replace("$.n quantity_not_a_number", "$.n quantity_wrong_unit")));
    }

    [Fact]
    public void Units_are_the_users_own()
    {
        double metric = Ask(Id, ("d", "8 mm"), ("l_ef", "63.5 mm"), ("rho_k", "350")).Value!.Result.Value;
        double inches = Ask(Id, ("d", "0.8 cm"), ("l_ef", "2 1/2 in"), ("rho_k", "0.35 g/cm3")).Value!.Result.Value;
        Assert.Equal(metric, inches, 1e-12 * metric);
    }

    [Fact]
    public void Unknown_rules_and_words_are_refused()
    {
        Assert.Equal("unknown_rule", Ask("no.such.rule").Problems.Single().Code);
        var problem = Ask("en338.table_1.rho_k", ("class", "c99")).Problems.Single();
        Assert.Equal(("unknown_choice", "one of c14, c16, c18, c22, c24, c30"), (problem.Code, problem.Allowed[..35]));
    }

    [Fact]
    public void A_search_finds_by_document_and_title()
    {
        Assert.Equal(RuleBook.All, RuleBook.Search(""));
        Assert.Contains(RuleBook.Search("pull-out"), r => r.Id == "aisi_s100.j4_4_1.pull_out");
        Assert.All(RuleBook.Search("NDS 2018"), r => Assert.StartsWith("nds.", r.Id));
    }

    [GeneratedRegex("^[a-z0-9_]+(\\.[a-z0-9_]+)+$")]
    private static partial Regex IdShape();
}
