// Words that people type for units in more than one dimension.

/** "ft" with "lb" gives ftlb and lbft. */
export const eitherWay = (one: string, other: string) =>
  one
    .split(' ')
    .flatMap((a) => other.split(' ').flatMap((b) => [a + b, b + a]))
    .join(' ')

export const inches = 'in inch inches'
export const pounds = 'lb lbs lbf lbsf pound pounds'
export const ounces = 'oz ozf ounce ounces'
export const celsius = '°c c degc celsius degreec degreesc degreecelsius degreescelsius degcelsius centigrade'
export const fahrenheit =
  '°f f degf fahrenheit degreef degreesf degreefahrenheit degreesfahrenheit degfahrenheit'
