using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Tests.Jobs;

public class DoorTests
{
    private static readonly ObjectShape Line = new(
        Field.Required("length_mm", new QuantityShape(Dimension.LengthMm, 1, 10_000)),
        Field.Optional("count", new IntegerShape(1, 9)),
        Field.Optional("at_mm", new PointShape(new QuantityShape(Dimension.LengthMm, -100, 100))),
        Field.Optional("word", new WordShape("red", "grey")),
        Field.Optional("name", new TextShape(10)),
        Field.Optional("id", new IdShape()),
        Field.Optional("factor", new NumberShape(0.5, 2)),
        Field.Optional("list", new ListShape(new NumberShape(0, 1), 1, 3)),
        Field.Optional("reading", new VariantShape("kind", [], [new Variant("tap", Field.Required("sound", new WordShape("dull"))), new Variant("hole", Field.Optional("depth", new NumberShape(0, 9)))])));

    [Theory]
    [InlineData("""{"length_mm":NaN}""", "not_a_number", "$.length_mm")]
    [InlineData("""{"list":[0,-Infinity]}""", "not_a_number", "$.list[1]")]
    [InlineData("""{"length_mm":1""", "not_json", "$.length_mm")]
    [InlineData("""{"length_mm":}""", "not_json", "$.length_mm")]
    [InlineData("", "not_json", "$")]
    [InlineData("[]", "wrong_type", "$")]
    [InlineData("""{}""", "missing_field", "$.length_mm")]
    [InlineData("""{"length_mm":1,"length_mm":2}""", "duplicate_field", "$.length_mm")]
    [InlineData("""{"length_mm":1,"legnth":2}""", "unknown_field", "$.legnth")]
    [InlineData("""{"length_mm":1,"a b":2}""", "unknown_field", "$['a b']")]
    [InlineData("""{"length_mm":1e308}""", "absurd_number", "$.length_mm")]
    [InlineData("""{"length_mm":1e999}""", "absurd_number", "$.length_mm")]
    [InlineData("""{"length_mm":-5}""", "negative", "$.length_mm")]
    [InlineData("""{"length_mm":0.5}""", "too_small", "$.length_mm")]
    [InlineData("""{"length_mm":10001}""", "too_big", "$.length_mm")]
    [InlineData("""{"length_mm":"3 kg"}""", "quantity_wrong_unit", "$.length_mm")]
    [InlineData("""{"length_mm":"long"}""", "quantity_not_a_number", "$.length_mm")]
    [InlineData("""{"length_mm":"12"}""", "quantity_without_unit", "$.length_mm")]
    [InlineData("""{"length_mm":"3 bananas"}""", "quantity_wrong_unit", "$.length_mm")]
    [InlineData("""{"length_mm":""}""", "quantity_empty", "$.length_mm")]
    [InlineData("""{"length_mm":true}""", "wrong_type", "$.length_mm")]
    [InlineData("""{"length_mm":null}""", "wrong_type", "$.length_mm")]
    [InlineData("""{"length_mm":1,"count":1.5}""", "not_whole", "$.count")]
    [InlineData("""{"length_mm":1,"at_mm":[1]}""", "not_a_point", "$.at_mm")]
    [InlineData("""{"length_mm":1,"at_mm":[1,"1 m"]}""", "too_big", "$.at_mm[1]")]
    [InlineData("""{"length_mm":1,"word":"blue"}""", "unknown_word", "$.word")]
    [InlineData("""{"length_mm":1,"name":"elevenchars"}""", "text_too_long", "$.name")]
    [InlineData("""{"length_mm":1,"name":"a\nb"}""", "broken_text", "$.name")]
    [InlineData("""{"length_mm":1,"name":"\ud800"}""", "broken_text", "$.name")]
    [InlineData("""{"length_mm":1,"id":"a b"}""", "not_an_id", "$.id")]
    [InlineData("""{"length_mm":1,"list":[]}""", "list_too_short", "$.list")]
    [InlineData("""{"length_mm":1,"list":[1,1,1,1]}""", "list_too_long", "$.list")]
    [InlineData("""{"length_mm":1,"reading":{"kind":"tap","sound":"dull","depth":1}}""", "field_of_another_kind", "$.reading.depth")]
    [InlineData("""{"length_mm":1,"reading":{"sound":"dull"}}""", "missing_field", "$.reading.kind")]
    [InlineData("""{"length_mm":1,"x_deep":[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]}""", "too_deep", "$.x_deep[0][0][0][0][0][0][0][0][0][0][0][0][0][0][0]")]
    public void Says_what_is_wrong_and_where(string json, string code, string path)
    {
        var problem = Assert.Single(Door.Read(json, Line).Problems);
        Assert.Equal((code, path), (problem.Code, problem.Path));
        Assert.NotEmpty(problem.Allowed);
    }

    [Fact]
    public void Reports_every_problem_at_once()
    {
        var problems = Door.Read("""{"length_mm":-1,"count":0,"word":"blue","other":1,"list":[2,0.5,3]}""", Line).Problems;
        Assert.Equal(["$.length_mm", "$.count", "$.word", "$.other", "$.list[0]", "$.list[2]"], problems.Select(p => p.Path));
    }

    [Fact]
    public void Reads_numbers_and_texts_with_units_alike()
    {
        var entry = Door.Read("""{"length_mm":"2.4 m","at_mm":["1/2 in",-3],"x_note":{"any":["thing"]}}""", Line).Value!;
        Assert.Equal(2400, entry.NumberOf("length_mm"));
        Assert.Equal(new Pattress.Jobs.Point(12.7, -3), entry.MaybePoint("at_mm"));
        Assert.Null(entry.MaybeText("word"));
    }

    [Fact]
    public void Stops_counting_problems_somewhere()
    {
        string json = "{" + string.Join(",", Enumerable.Range(0, 500).Select(i => $"\"u{i}\":1")) + "}";
        var problems = Door.Read(json, Line).Problems;
        Assert.Equal(ProblemList.Most + 1, problems.Count);
        Assert.Equal("more_problems", problems[^1].Code);
    }

    [Fact]
    public void Refuses_a_document_that_is_too_large_or_not_text()
    {
        Assert.Equal("too_large", Assert.Single(Door.Read(new string(' ', 3_000_000), Line).Problems).Code);
        Assert.Equal("not_utf8", Assert.Single(Door.Read(new byte[] { (byte)'"', 0xC3, 0x28, (byte)'"' }, Line).Problems).Code);
        Assert.Equal("not_utf8", Assert.Single(Door.Read("\"\ud800\"", Line).Problems).Code);
    }

    [Fact]
    public void Reads_past_a_byte_order_mark() =>
        Assert.True(Door.Read("\uFEFF{\"length_mm\":1}", Line).Ok);
}
